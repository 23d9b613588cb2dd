/** How long a machine takes: acceleration, corners, curves. Lengths in mm, times in seconds. */
package org.frisket.toolpath.motion;
