/** What the rooms of this bundle share: the order book as the screen knows it. */
package org.frisket.ui.orders.internal;
