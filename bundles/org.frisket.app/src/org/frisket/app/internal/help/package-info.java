/** The view that shows the pages of help, and the key that opens the page about what is worked in. */
package org.frisket.app.internal.help;
