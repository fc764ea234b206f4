/** Named tolerances, mm unless said otherwise; each says what breaks when it is larger or smaller. */

/** Farthest that a fitted cubic may lie from its true line. Larger eats into the 0.05 mm that allowances promise; smaller only adds pieces. */
export const FIT = 0.004;

/** The same of a shaped seam: a girth is measured square to its seams, and at FIT they lean by thousandths, by which a wide panel that turns misses it by tenths of a millimetre. Larger does so; smaller only adds pieces. */
export const SEAM_FIT = 0.001;

/** Curves nearer than this at a join are one. Larger would hide a gap that shears follow; smaller trips over rounding. */
export const JOIN = 1e-6;

/** Relative change at which iterated widths have settled. Larger shows as seams that miss; smaller never ends. */
export const SETTLED = 1e-13;

/** Chord height when a curve is flattened for tests of overlap or crossing. Larger misses a crossing; smaller costs time. */
export const FLAT = 0.02;

/** Seam sides may differ by this (design truth). Larger puckers on sheers; smaller is beyond shears and chalk. */
export const SEAM_AGREES = 0.1;

/** Angles at a seam may miss 180° by this, radians (0.1°). Larger shows as a step at the hem. */
export const ANGLE_AGREES = (0.1 * Math.PI) / 180;

/** Tops against panels and waist seam: the closest that specialists true to, 1/16 in. */
export const WAIST_AGREES = 1.5;

/** An edge whose depth (mm) and slope vary less than this is level and drawn as one exact arc. Larger would hide a slope; smaller trips over rounding. */
export const LEVEL = 1e-9;

/** Farthest that a line joined up from a chalk table may lie from the true one. Larger than chalk is wide spoils the seam; smaller asks for more points than anyone marks. */
export const CHALK_AGREES = 1;

/** Heights that a slant over a petticoat may miss, mm. Larger shows at the hem of a wide hoop; smaller only costs rounds. */
export const LEVEL_HEIGHT = 1e-7;

/** Chord height when an outline is read as a region of cloth. Larger eats into what CLOTH_HOLDS allows; smaller costs time. */
export const OUTLINE_READ = 0.004;

/** How far a new cut line may pass beyond cloth that is cut already, mm. Larger would call cloth enough that is not; smaller trips over FIT and OUTLINE_READ. */
export const CLOTH_HOLDS = 0.05;

/** Lines that keep within this of where they were have not moved, mm. Larger would hide a change; smaller would report the rounding of fitted curves. */
export const LINE_STAYS = 0.05;

/** Share of its girth by which a skirt may be tighter than its petticoat. Larger would hide a skirt that rides up; smaller trips over gores that each follow a curve of their own between the levels. */
export const PETTICOAT_AGREES = 0.003;

/** Farthest that a seam line may lie outside of its cut line, mm, where an edge has no allowance. Larger would let cloth be cut off that is sewn; smaller trips over FIT and the chords that outlines are read by. */
export const CUT_OUTSIDE = 0.05;

/** Ends of an outline's lines that lie farther apart than this do not meet, mm. Larger would draw a broken outline as if it closed; smaller trips over two halves that meet within FIT each. */
export const ENDS_MEET = 0.05;
