/** Verbs about parts on sheets. */
package org.frisket.cli.sheets;
