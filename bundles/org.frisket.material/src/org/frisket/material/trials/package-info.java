/**
 * What was tried and what came of it: trials and their verdicts, sheets of them, runs of jobs, and how a studio keeps
 * all that. Settings are in the steps of the machine; lengths in mm, grammage in g/m², cut lengths in m.
 */
package org.frisket.material.trials;
