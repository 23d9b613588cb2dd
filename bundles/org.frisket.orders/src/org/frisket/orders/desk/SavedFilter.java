package org.frisket.orders.desk;

/** What a studio looks at again and again, under a name. */
public record SavedFilter(String name, BookQuery query) {
}
