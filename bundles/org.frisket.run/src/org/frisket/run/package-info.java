/**
 * The run that works a sheet: what the studio knows of its machine, tools and settings ({@link org.frisket.run.Workshop})
 * makes of what lies on a sheet the moves in their order, with times and settings ({@link org.frisket.run.MachineRun}).
 * Everything here runs without a screen.
 */
package org.frisket.run;
