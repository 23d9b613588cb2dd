/**
 * Forms that are made from a region: what encloses it, what it sweeps over, and itself with other corners or fewer
 * holes. Those that can do so keep the source's curves ({@code ConvexHull}, {@code Sweep}, {@code RoundedCorners}, {@code
 * SmallHoles}, {@code Split}); the others fit curves anew.
 */
package org.frisket.geometry.form;
