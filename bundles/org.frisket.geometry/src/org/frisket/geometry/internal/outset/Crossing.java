package org.frisket.geometry.internal.outset;

/**
 * Where two rims cross. Further on, the one that arrives lies in reach of the other's foot, as the one that leaves does
 * before.
 *
 * @param arriving number of a rim
 * @param leaving  number of a rim
 */
record Crossing(int arriving, double arrivingAt, int leaving, double leavingAt, double x, double y) {
}
