/** Jobs of the order book on the bench: opened, saved, and compared where another desk was quicker. */
package org.frisket.ui.orders.internal.keep;
