/** Register marks: where they stand on a sheet, and where they are in a scan of it. */
package org.frisket.print.marks;
