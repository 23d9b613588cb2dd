/**
 * What the screen and the command line do with the studio's settings: reading and changing them, planning a test sheet,
 * numbers as people type them. Lengths in mm.
 */
package org.frisket.material.desk;
