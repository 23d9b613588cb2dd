/**
 * What every screen area shares: the named colours of the theme, the icons, and how lengths are written. Nothing here
 * knows the workbench, a job or geometry.
 */
package org.frisket.ui;
