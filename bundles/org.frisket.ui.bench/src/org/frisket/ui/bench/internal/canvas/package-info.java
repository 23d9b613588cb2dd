/**
 * Where the GEF of 2007 falls short, each gap closed in one place: layers that scale on the window system's graphics,
 * the border between millimetres and figure units, zoom about the pointer, lines of one width at every zoom, drags that
 * are followed to their end.
 */
package org.frisket.ui.bench.internal.canvas;
