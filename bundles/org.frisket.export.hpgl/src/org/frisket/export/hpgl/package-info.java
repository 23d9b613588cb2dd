/** Sheets and jobs as HP-GL/2. */
package org.frisket.export.hpgl;
