/**
 * What paper weighs and how thick it is, in all the units it is sold by. Grammage in g/m², pounds by grade, caliper in mm,
 * mass in g, all as {@link java.math.BigDecimal}: exact where the definition is, else to 34 digits.
 */
package org.frisket.material.weights;
