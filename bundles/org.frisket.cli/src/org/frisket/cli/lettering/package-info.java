/** Verbs and options for fonts and their letters. */
package org.frisket.cli.lettering;
