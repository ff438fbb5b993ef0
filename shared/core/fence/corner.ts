/** A corner of a boundary, in decimal degrees on WGS84. */
export interface Corner {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}
