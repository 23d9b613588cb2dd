/**
 * What files for machines share: the machine's frame ({@link org.frisket.export.machine.MachineFrame}), the numbers of
 * its tools, numbers and words that every machine reads. Lengths in mm, angles in radians.
 */
package org.frisket.export.machine;
