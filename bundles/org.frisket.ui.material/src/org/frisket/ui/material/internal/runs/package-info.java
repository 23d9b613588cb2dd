/** Runs of jobs: what was cut, with what, and how it came out. */
package org.frisket.ui.material.internal.runs;
