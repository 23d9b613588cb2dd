/** The order book on the command line. */
package org.frisket.cli.orders;
