/**
 * Set text brought to a shape: bent on an arc or along a path, or made to fill a box.
 * <p>
 * Letters are moved and turned, never bent themselves. A letter stands on the curve by the middle of its advance, and
 * lengths along the line are lengths along the curve. The text comes as it was set straight, with its letters joined
 * or nudged already if they are to be.
 */
package org.frisket.typography.layout;
