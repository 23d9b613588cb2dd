package org.frisket.export.machine;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.OperationInk;
import org.frisket.model.OperationKind;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Leg;

/**
 * The number a machine knows the tool of each leg by: what the studio says for its operation, or else the tools' order in
 * the run, from 1, over all numbers that are taken.
 */
public final class ToolNumbers {

	private static final Pattern PAIR = Pattern.compile("([a-z-]+)\\s*=\\s*([1-9][0-9]{0,2})");

	private final List<Integer> numbers = new ArrayList<>();

	/**
	 * @param given such as {@code draw=2, cut=1}, by the words of {@link OperationInk}; empty for none
	 * @throws IOException if that cannot be read
	 */
	public ToolNumbers(MachineRun run, String given) throws IOException {
		Map<String, Integer> byWord = read(given);
		Set<Integer> taken = new HashSet<>(byWord.values());
		Map<String, Integer> byTool = new HashMap<>();
		int next = 1;
		for (Leg leg : run.run().legs()) {
			Integer number = byWord.get(OperationInk.word(OperationKind.valueOf(leg.stage().name())));
			if (number == null) {
				number = byTool.get(leg.tool());
			}
			if (number == null) {
				while (!taken.add(next)) {
					next++;
				}
				number = next;
				byTool.put(leg.tool(), number);
			}
			numbers.add(number);
		}
	}

	private static Map<String, Integer> read(String given) throws IOException {
		Map<String, Integer> numbers = new LinkedHashMap<>();
		if (given.isBlank()) {
			return numbers;
		}
		for (String pair : given.strip().split("\\s*[,;]\\s*|\\s+(?=[a-z])")) {
			Matcher matcher = PAIR.matcher(pair);
			if (!matcher.matches() || !isWord(matcher.group(1))) {
				throw new IOException(NLS.bind(Messages.ToolNumbers_wrong, pair));
			}
			numbers.put(matcher.group(1), Integer.valueOf(matcher.group(2)));
		}
		return numbers;
	}

	private static boolean isWord(String word) {
		for (OperationKind kind : OperationKind.values()) {
			if (kind != OperationKind.PRINT && OperationInk.word(kind).equals(word)) {
				return true;
			}
		}
		return false;
	}

	/** Of the tool of a leg, from 0. */
	public int of(int leg) {
		return numbers.get(leg);
	}

	/** All there are. */
	public Set<Integer> all() {
		return Set.copyOf(numbers);
	}
}
