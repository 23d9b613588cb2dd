/** The docket of the selected job on the screen, and the papers that are made of it. */
package org.frisket.ui.orders.internal.docket;
