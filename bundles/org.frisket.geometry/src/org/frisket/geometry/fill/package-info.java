/** Lines that fill an area, for a pen to draw. */
package org.frisket.geometry.fill;
