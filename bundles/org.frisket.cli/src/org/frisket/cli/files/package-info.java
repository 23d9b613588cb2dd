/** Verbs for files of others: taken in, cleaned, handed out. */
package org.frisket.cli.files;
