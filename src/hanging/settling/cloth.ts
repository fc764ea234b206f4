/** The cloth that settles: numbers by place, column by column, each from the top down. */
class Cloth {
  columns: i32 = 0;
  /** Places in a column. */
  rows: i32 = 0;
  /** The last column is sewn to the first. */
  ring: bool = false;
  /** The first and the last column lie on the plane of the mirror image. */
  firstOnPlane: bool = false;
  lastOnPlane: bool = false;
  /** Three numbers a place. */
  place: StaticArray<f64> = new StaticArray<f64>(0);
  before: StaticArray<f64> = new StaticArray<f64>(0);
  motion: StaticArray<f64> = new StaticArray<f64>(0);
  /** One over inertia; 0 where the cloth is held. */
  ease: StaticArray<f64> = new StaticArray<f64>(0);
  falls: StaticArray<f64> = new StaticArray<f64>(0);
  area: StaticArray<f64> = new StaticArray<f64>(0);
  along: StaticArray<f64> = new StaticArray<f64>(0);
  across: StaticArray<f64> = new StaticArray<f64>(0);
  gathered: StaticArray<f64> = new StaticArray<f64>(0);
  /** How far off what is worn under it it lies. */
  lifted: StaticArray<f64> = new StaticArray<f64>(0);
  cell: StaticArray<f64> = new StaticArray<f64>(0);
  skew: StaticArray<f64> = new StaticArray<f64>(0);

  begin(columns: i32, rows: i32, ring: bool, firstOnPlane: bool, lastOnPlane: bool): void {
    this.columns = columns;
    this.rows = rows;
    this.ring = ring;
    this.firstOnPlane = firstOnPlane;
    this.lastOnPlane = lastOnPlane;
    const count = columns * rows;
    this.place = new StaticArray<f64>(3 * count);
    this.before = new StaticArray<f64>(3 * count);
    this.motion = new StaticArray<f64>(3 * count);
    this.ease = new StaticArray<f64>(count);
    this.falls = new StaticArray<f64>(count);
    this.area = new StaticArray<f64>(count);
    this.along = new StaticArray<f64>(count);
    this.across = new StaticArray<f64>(count);
    this.gathered = new StaticArray<f64>(count);
    this.lifted = new StaticArray<f64>(count);
    this.cell = new StaticArray<f64>(count);
    this.skew = new StaticArray<f64>(count);
  }

  drop(): void {
    const place = this.place;
    const before = this.before;
    const motion = this.motion;
    const ease = this.ease;
    const falls = this.falls;
    for (let i = 0, a = 0; i < ease.length; i++, a += 3) {
      before[a] = place[a];
      before[a + 1] = place[a + 1];
      before[a + 2] = place[a + 2];
      if (ease[i] === 0) continue;
      place[a] += motion[a];
      place[a + 1] += motion[a + 1];
      place[a + 2] += motion[a + 2] - falls[i];
    }
  }

  keepMotion(keeps: f64): void {
    const place = this.place;
    const before = this.before;
    const motion = this.motion;
    for (let a = 0; a < place.length; a++) motion[a] = (place[a] - before[a]) * keeps;
  }
}

export const cloth = new Cloth();
