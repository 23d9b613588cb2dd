/**
 * The order book as somebody at a desk looks at it: read bit by bit, found by words, sorted and put into groups; and a
 * sample studio for one who has nothing in it yet.
 */
package org.frisket.orders.desk;
