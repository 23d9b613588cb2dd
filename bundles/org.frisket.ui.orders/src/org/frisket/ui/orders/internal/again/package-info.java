/** A job that was made before is made again. */
package org.frisket.ui.orders.internal.again;
