/**
 * The run of a sheet or job as HP-GL/2, for machines with a pen or a blade. Only few instructions are used, which older
 * machines know too.
 */
package org.frisket.export.hpgl;
