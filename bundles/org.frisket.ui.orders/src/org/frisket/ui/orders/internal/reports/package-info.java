/** How the studio is doing, in figures and pictures. */
package org.frisket.ui.orders.internal.reports;
