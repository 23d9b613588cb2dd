package org.frisket.orders;

/** What was asked of the order book cannot be done; the message says why, for people. */
public class OrderException extends Exception {

	private static final long serialVersionUID = 1L;

	public OrderException(String message) {
		super(message);
	}

	public OrderException(String message, Exception cause) {
		super(message, cause);
	}
}
