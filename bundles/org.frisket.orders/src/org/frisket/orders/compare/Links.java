package org.frisket.orders.compare;

import java.util.List;

/** Other nodes that one leads to, by their keys; whether it may be several does not matter. */
record Links(List<String> keys) {

	static final Links NONE = new Links(List.of());
}
