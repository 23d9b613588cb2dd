package org.frisket.material;

import java.math.BigDecimal;
import java.util.Currency;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.weights.Measures;

/** What a sheet, or a metre of a roll, costs. */
public record Price(BigDecimal amount, Currency currency) {

	private static final BigDecimal MOST = new BigDecimal(1_000_000);
	private static final int DECIMALS = 4;

	/** @throws InvalidStockException if it is below zero, absurdly high, or has more than four decimals */
	public Price {
		amount = Measures.plain(amount);
		if (amount.signum() < 0 || amount.compareTo(MOST) > 0 || amount.scale() > DECIMALS) {
			throw new InvalidStockException(StockField.PRICE,
					NLS.bind(Messages.Price_amount, amount.toPlainString(), MOST.toPlainString()));
		}
	}

	/** @throws InvalidStockException if ISO 4217 knows no such currency */
	public static Currency currency(String code) {
		try {
			return Currency.getInstance(code);
		} catch (IllegalArgumentException unknown) {
			throw new InvalidStockException(StockField.CURRENCY, NLS.bind(Messages.Price_currency, code));
		}
	}

	/** Such as {@code 0.45 EUR}. */
	@Override
	public String toString() {
		return amount.toPlainString() + ' ' + currency.getCurrencyCode();
	}
}
