package org.frisket.ui.print.internal.output;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Finding;
import org.frisket.print.output.PrintAndCut;
import org.frisket.ui.views.internal.SeverityText;

/** What is wrong with sheets, in words. */
final class FindingWords {

	private FindingWords() {
	}

	/** A line each, the gravest first. */
	static String of(List<PrintAndCut> sheets, List<String> problems) {
		record Told(int sheet, Finding finding) {
		}
		String found = sheets.stream()
				.flatMap(sheet -> sheet.findings().stream().map(each -> new Told(sheet.print().faces().number(), each)))
				.sorted(Comparator.comparing(each -> each.finding().severity()))
				.map(each -> NLS.bind(Messages.FindingWords_line,
						new Object[] { SeverityText.of(each.finding().severity()), each.sheet(), sentence(each.finding()) }))
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		String missing = String.join("\n", problems); //$NON-NLS-1$
		String all = missing.isEmpty() || found.isEmpty() ? missing + found : missing + '\n' + found;
		return all.isEmpty() ? Messages.FindingWords_none : all;
	}

	/** What is wrong, and what helps. */
	static String sentence(Finding finding) {
		return finding.message() + ' ' + finding.cure();
	}
}
