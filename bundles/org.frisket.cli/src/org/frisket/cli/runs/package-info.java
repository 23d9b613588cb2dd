/** The verb that says how the sheets of a job are run: tools, time and cost. */
package org.frisket.cli.runs;
