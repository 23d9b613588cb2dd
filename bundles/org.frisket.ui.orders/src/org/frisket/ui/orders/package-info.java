/** What others may open of the order desk. */
package org.frisket.ui.orders;
