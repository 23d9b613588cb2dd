/** Parts as convex pieces. */
package org.frisket.impose.shape;
