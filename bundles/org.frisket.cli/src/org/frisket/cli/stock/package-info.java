/** Verbs for the studio's stock. */
package org.frisket.cli.stock;
