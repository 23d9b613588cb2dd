/**
 * Sheets and jobs as ASCII DXF of R12, which most programs read: curves as polylines with arcs, a layer for each operation.
 */
package org.frisket.export.dxf;
