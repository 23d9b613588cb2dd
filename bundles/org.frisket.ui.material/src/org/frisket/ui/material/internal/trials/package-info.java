/** The page of test sheets: planning one, judging its cells, the chart and the advice that come of it. */
package org.frisket.ui.material.internal.trials;
