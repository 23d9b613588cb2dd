/**
 * Which blade exposure, pressure, speed and passes to begin with, how sure that is, and why. With no trials by rules of
 * thumb; with trials by monotone regression within a family of stock.
 */
package org.frisket.material.advice;
