package org.frisket.material.calibration;

/** @param error standard error of the value; NaN if it cannot be told */
public record Estimate(double value, double error) {
}
