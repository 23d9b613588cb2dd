/** Sheets and rolls by their sizes, in mm, and the names that standards give them. */
package org.frisket.material.sizes;
