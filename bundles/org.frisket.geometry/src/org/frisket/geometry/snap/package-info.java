/**
 * Holding what is moved to lines and points that lie near. Places are in mm; nothing here knows a screen.
 */
package org.frisket.geometry.snap;
