/**
 * Advance widths in thousandths of an em, two base-36 digits each, so that pages can be laid out without loading a
 * font. Read from the fonts' own tables; a test reads them again and compares.
 */

/** Helvetica, WinAnsi codes 32 to 255. */
export const HELVETICA =
  '7q7q9vfgfgopij5b9999atg87q997q7qfgfgfgfgfgfgfgfgfgfg7q7qg8g8g8fgs7ijijk2k2ijgzlmk27qdwijfgn5k2lmijlm' +
  'k2ijgzk2ijq8ijijgz7q7q7qd1fg99fgfgdwfgfg7qfgfg6666dw66n5fgfgfgfg99dw7qfgdwk2dwdwdw9a789ag800fg0066fg' +
  '99rsfgfg99rsij99rs00gz0000666699999qfgrs99rsdw99q800dwdw7q99fgfgfgfg78fg99khaafgg899kh99b4g8999999fg' +
  'ex7q9999a5fgn6n6n6gzijijijijijijrsk2ijijijij7q7q7q7qk2k2lmlmlmlmlmg8lmk2k2k2k2ijijgzfgfgfgfgfgfgopdw' +
  'fgfgfgfg7q7q7q7qfgfgfgfgfgfgfgg8gzfgfgfgfgdwfgdw';

/** Helvetica Bold, WinAnsi codes 32 to 255. */
export const HELVETICA_BOLD =
  '7q99d6fgfgopk26m9999atg87q997q7qfgfgfgfgfgfgfgfgfgfg9999g8g8g8gzr3k2k2k2k2ijgzlmk27qfgk2gzn5k2lmijlm' +
  'k2ijgzk2ijq8ijijgz997q99g8fg99fggzfggzfg99gzgz7q7qfg7qopgzgzgzgzatfg99gzfglmfgfgdwat7satg800fg007qfg' +
  'dwrsfgfg99rsij99rs00gz00007q7qdwdw9qfgrs99rsfg99q800dwfg7q99fgfgfgfg7sfg99khaafgg899kh99b4g8999999gz' +
  'fg7q9999a5fgn6n6n6gzk2k2k2k2k2k2rsk2ijijijij7q7q7q7qk2k2lmlmlmlmlmg8lmk2k2k2k2ijijgzfgfgfgfgfgfgopfg' +
  'fgfgfgfg7q7q7q7qgzgzgzgzgzgzgzg8gzgzgzgzgzfggzfg';

/** Characters that the DejaVu table covers, first and last of each range in order. */
export const DEJAVU_RANGES: readonly (readonly [number, number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x370, 0x3ff],
  [0x400, 0x45f],
];

/** DejaVu Sans; its bold is the same glyphs with a stroke round them, so as wide. 0 where the font has none. */
export const DEJAVU =
  '8ub5csnahoqelo7nauaudwna8ua18u9dhohohohohohohohohoho9d9dnananaerrsj0j2jelehkfzljkw8787i8fhnzkslvgrlv' +
  'jbhngzkcj0rhj1gzj1au9daunadwdwh1hnfahnh39shnhm7q7qg37qr2hmh0hnhnbfehawhmggmqggggelho9dhona8ub5hohoho' +
  'ho9ddwdwrsd3h0naa1rsdwdwnab5b5dwhoho8udwb5d3h0qxqxqxerj0j0j0j0j0j0r2jehkhkhkhk87878787ljkslvlvlvlvlv' +
  'nalvkckckckcgzgthih1h1h1h1h1h1rafah3h3h3h37q7q7q7qh0hmh0h0h0h0h0nah0hmhmhmhmgghnggj0h1j0h1j0h1jefaje' +
  'fajefajefalehnljhnhkh3hkh3hkh3hkh3hkh3ljhnljhnljhnljhnkwhmpgjb877q877q877q877q877qgefg877qi8g3g3fh7q' +
  'fh7qfhaffh9ifm7wkshmkshmkshmmlkshmlvh0lvh0lvh0tqsfjbbfjbbfjbbfhnehhnehhnehhnehgzawgzawgzawkchmkchmkc' +
  'hmkchmkchmkchmrhmqgzgggzj1elj1elj1el9si6fsnyhz7q7qksi20000dwf9faf99d8700000000dwdwj88ukqo7bc00ml00mx' +
  'my9ej0j2fhj0hkj1kwlv87i8j0nzkshklvkwgr00hkgzgzlvj1lvl887gzibf1hm9eg3ibhqggh0f1f4hmh09egdgghofjfih0gq' +
  'hngbhmgqg3icg2icn99eg3h0g3n9i8h2h7jfnejficn9iglvh0i0gbfzcqicico1hfpyn9l2ibm0h3j3gvlchdjfh0gzewighnfa' +
  '7qlvh3h3gthnjenzi3hnjjjejjhkhklugyjehn878787uet1lujqksgxkwj0j2j2gylphktxhtksksjqkwnzkwlvkwgrjegzgxnx' +
  'j1lkj2tpuen5oij2jeu0jbh1h5gdelj7h3p1esi2i2gshrkyi6h0i6hnfag7ggnrggixgfpfq6jnlygdf9negqh3h3hdelf9eh7q' +
  '7q7qp2oyi4gsi2ggi6';
