package org.frisket.orders.paper.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/**
 * Something that is asked for besides material and time.
 *
 * @param amount without tax
 * @param tax    its rate in %; empty for that of the quote
 */
public record Extra(String name, BigDecimal amount, Optional<BigDecimal> tax) {

	private static final String NUMBER = "(\\d{1,9}(?:[.,]\\d{1,4})?)";
	private static final Pattern FORM = Pattern.compile("([^=;]+?)\\s*=\\s*" + NUMBER + "(?:\\s*@\\s*" + NUMBER + "\\s*%?)?");
	private static final BigDecimal MOST_TAX = new BigDecimal(100);

	/**
	 * As people type them: {@code Gift boxes=12.50; Delivery=6.90@7}, where 7 % is the rate of tax on the delivery.
	 *
	 * @throws IllegalArgumentException with the reason in the user's language
	 */
	public static List<Extra> parse(String text) {
		List<Extra> extras = new ArrayList<>();
		for (String part : text.split(";")) {
			if (part.isBlank()) {
				continue;
			}
			Matcher form = FORM.matcher(part.strip());
			if (!form.matches()) {
				throw new IllegalArgumentException(NLS.bind(Messages.Extra_form, part.strip()));
			}
			Optional<BigDecimal> tax = Optional.ofNullable(form.group(3)).map(Extra::number);
			if (tax.isPresent() && tax.get().compareTo(MOST_TAX) > 0) {
				throw new IllegalArgumentException(NLS.bind(Messages.Extra_tax, part.strip()));
			}
			extras.add(new Extra(form.group(1), number(form.group(2)), tax));
		}
		return extras;
	}

	private static BigDecimal number(String text) {
		return new BigDecimal(text.replace(',', '.'));
	}
}
