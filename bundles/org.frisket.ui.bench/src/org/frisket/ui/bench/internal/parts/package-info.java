/** The parts that stand between the job and the figures: each follows its part of the model and shows its picture. */
package org.frisket.ui.bench.internal.parts;
