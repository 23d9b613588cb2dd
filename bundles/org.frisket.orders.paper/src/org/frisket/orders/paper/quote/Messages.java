package org.frisket.orders.paper.quote;

import org.eclipse.osgi.util.NLS;

/** What quotes say, in the user's language. */
final class Messages extends NLS {

	public static String Costs_currencies;
	public static String Costs_noCurrency;
	public static String Costs_noPrice;
	public static String Costs_noRate;
	public static String Costs_notLaid;
	public static String Costs_nothing;
	public static String Costs_rate;
	public static String Costs_roll;
	public static String Costs_setUp;
	public static String Costs_shareOfRoll;
	public static String Costs_shareOfSheets;
	public static String Costs_sheets;
	public static String Costs_time;
	public static String Extra_form;
	public static String Extra_tax;
	public static String QuoteOptions_currency;
	public static String QuoteOptions_discount;
	public static String QuoteOptions_extras;
	public static String QuoteOptions_material;
	public static String QuoteOptions_minimum;
	public static String QuoteOptions_rate;
	public static String QuoteOptions_rounding;
	public static String QuoteOptions_setUp;
	public static String QuoteOptions_tax;
	public static String QuoteOptions_time;
	public static String QuoteOptions_valid;
	public static String Quote_allCosts;
	public static String Quote_cost;
	public static String Quote_costTitle;
	public static String Quote_customer;
	public static String Quote_date;
	public static String Quote_discount;
	public static String Quote_draft;
	public static String Quote_left;
	public static String Quote_lines;
	public static String Quote_markUp;
	public static String Quote_minimum;
	public static String Quote_net;
	public static String Quote_noTax;
	public static String Quote_price;
	public static String Quote_quantity;
	public static String Quote_roundedByLine;
	public static String Quote_roundedByTotal;
	public static String Quote_studioOnly;
	public static String Quote_sum;
	public static String Quote_tax;
	public static String Quote_title;
	public static String Quote_total;
	public static String Quote_validUntil;
	public static String StudioQuote_wrong;

	static {
		initializeMessages("org.frisket.orders.paper.quote.messages", Messages.class);
	}

	private Messages() {
	}
}
