package org.frisket.orders.desk;

/** What the order book can be sorted by. */
public enum BookColumn {
	NUMBER, CUSTOMER, TITLE, STAGE, DUE, STOCK, QUANTITY
}
