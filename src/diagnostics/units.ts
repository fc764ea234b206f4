/** What the maker measures in. */
export type Units = 'mm' | 'cm' | 'in';
