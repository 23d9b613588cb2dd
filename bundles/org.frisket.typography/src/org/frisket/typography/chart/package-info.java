/** Every glyph of a face for the eye: what it is called, what it stands for, what kind it is. */
package org.frisket.typography.chart;
