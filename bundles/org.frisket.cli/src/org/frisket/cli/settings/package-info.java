/** Verbs for tools, machines, test cuts, runs, and what they say of the settings to begin with. */
package org.frisket.cli.settings;
