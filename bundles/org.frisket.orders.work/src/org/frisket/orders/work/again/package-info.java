/**
 * A job that is made again ({@link org.frisket.orders.work.again.Again}): a copy of it as an order of its own, and what has
 * changed in the studio since it was made ({@link org.frisket.orders.work.again.MadeWith}).
 */
package org.frisket.orders.work.again;
