/**
 * Whom a studio works for ({@link org.frisket.orders.customers.Customers}). Names that look alike are proposed to be one
 * ({@link org.frisket.orders.customers.Likeness}); all that is kept of a customer can be handed out, and be erased.
 */
package org.frisket.orders.customers;
