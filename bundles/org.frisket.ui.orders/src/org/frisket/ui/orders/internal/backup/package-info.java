/** The whole studio as a file, and back, from the screen. */
package org.frisket.ui.orders.internal.backup;
