package org.frisket.material;

/** Something about a stock cannot be so; the message says what, for people. */
public final class InvalidStockException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	private final StockField field;

	InvalidStockException(StockField field, String message) {
		super(message);
		this.field = field;
	}

	/** What is wrong. */
	public StockField field() {
		return field;
	}
}
