/** Sheets and jobs as DXF. */
package org.frisket.export.dxf;
