/**
 * How far a machine and a blade are from what they are told, found from what was cut: the trailing of a blade's tip, and
 * the scale and squareness of the axes. Lengths in mm, angles in degrees, standard errors of one sigma.
 */
package org.frisket.material.calibration;
