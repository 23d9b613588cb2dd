/** Commands that make shapes, or others of them: mats, combinations, outlines, corners, weed lines. */
package org.frisket.ui.bench.internal.handlers.shapes;
