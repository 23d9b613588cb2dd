/**
 * Orders that come as a table ({@link org.frisket.orders.intake.OrderIntake}): all its rows or none. Which column holds what
 * is guessed, said, or remembered by the studio.
 */
package org.frisket.orders.intake;
