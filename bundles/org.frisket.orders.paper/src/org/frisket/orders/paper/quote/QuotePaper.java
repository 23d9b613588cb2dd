package org.frisket.orders.paper.quote;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.Titles;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.FlowedPages;
import org.frisket.prepare.layout.PageSetup;

/**
 * A quote on paper: for the customer, with what is asked for each thing; or as a cost sheet for the studio, with what it
 * costs and what is added. The same quote makes the same bytes.
 */
public final class QuotePaper {

	private final QuoteSheet quote;
	private final FlowedPages pages;
	private final Column column;
	private final MoneyRows rows;

	private QuotePaper(QuoteSheet quote, PaperForm form, String kind) {
		this.quote = quote;
		pages = new FlowedPages(new PageSetup(form.paper(), false, true), Titles.joined(kind, quote.number(),
				quote.title().lines().findFirst().orElse("")));
		column = pages.column();
		rows = new MoneyRows(column, quote.currency());
	}

	/** Writes it for the customer, as PDF. @throws IOException if the stream fails or the font of the pages is missing */
	public static void write(QuoteSheet quote, PaperForm form, OutputStream out) throws IOException {
		QuotePaper paper = new QuotePaper(quote, form, Messages.Quote_title);
		paper.head();
		paper.lines();
		paper.sums();
		paper.terms();
		paper.pages.write(paper.column, quote.job(), out);
	}

	/** Writes the cost sheet, as PDF. @throws IOException if the stream fails or the font of the pages is missing */
	public static void writeCosts(QuoteSheet quote, PaperForm form, OutputStream out) throws IOException {
		QuotePaper paper = new QuotePaper(quote, form, Messages.Quote_costTitle);
		paper.head();
		paper.costs();
		paper.sums();
		paper.column.gap();
		paper.column.text(Messages.Quote_studioOnly, 0, Column.DARK);
		paper.pages.write(paper.column, quote.job(), out);
	}

	private void head() throws IOException {
		for (String gap : quote.gaps()) {
			column.framed(NLS.bind(Messages.Quote_draft, gap));
		}
		fact(Messages.Quote_customer, quote.customer());
		fact(Messages.Quote_quantity, Figures.number(quote.quantity(), 0));
		fact(Messages.Quote_date, quote.date().map(Days::whole).orElse(""));
		fact(Messages.Quote_validUntil, quote.validUntil().map(Days::whole).orElse(""));
	}

	private void fact(String name, String value) {
		if (!value.isEmpty()) {
			column.row(List.of(name, value), new double[] { 0.2, 0.8 }, Column.BLACK);
		}
	}

	private boolean isTaxed() {
		return !quote.sums().taxes().isEmpty();
	}

	private void lines() throws IOException {
		column.heading(Messages.Quote_lines);
		for (QuoteLine line : quote.sums().lines()) {
			String price = rows.text(line.price());
			rows.row(line.name(), isTaxed() ? List.of(MoneyRows.percent(line.rate()), price) : List.of(price), Column.BLACK);
		}
	}

	private void costs() throws IOException {
		column.heading(Messages.Quote_lines);
		rows.row("", List.of(Messages.Quote_cost, Messages.Quote_markUp, Messages.Quote_price), Column.DARK);
		for (QuoteLine line : quote.sums().lines()) {
			rows.row(line.name(), List.of(rows.text(line.cost()), MoneyRows.percent(line.markUp()), rows.text(line.price())),
					Column.BLACK);
		}
		rows.rule();
		BigDecimal left = quote.sums().net().subtract(quote.sums().cost());
		rows.row(Messages.Quote_allCosts, List.of(rows.text(quote.sums().cost())), Column.BLACK);
		rows.row(Messages.Quote_left, List.of(rows.text(left)), Column.BLACK);
	}

	private void sums() throws IOException {
		QuoteSums sums = quote.sums();
		rows.rule();
		rows.row(Messages.Quote_sum, List.of(rows.text(sums.sum())), Column.BLACK);
		if (sums.discount().signum() > 0) {
			rows.row(Messages.Quote_discount, List.of(rows.text(sums.discount().negate())), Column.BLACK);
			rows.row(Messages.Quote_net, List.of(rows.text(sums.net())), Column.BLACK);
		}
		for (TaxLine tax : sums.taxes()) {
			rows.row(NLS.bind(Messages.Quote_tax, MoneyRows.percent(tax.rate()), rows.text(tax.net())),
					List.of(rows.text(tax.tax())), Column.BLACK);
		}
		rows.rule();
		rows.row(Messages.Quote_total, List.of(rows.text(sums.total())), Column.BLACK);
	}

	private void terms() throws IOException {
		column.gap();
		if (isTaxed()) {
			column.text(quote.rounding() == Rounding.LINE ? Messages.Quote_roundedByLine : Messages.Quote_roundedByTotal, 0,
					Column.DARK);
		} else {
			column.text(Messages.Quote_noTax, 0, Column.DARK);
		}
	}
}
