/** The studio's rules for stages, as preferences. */
package org.frisket.ui.orders.internal.rules;
