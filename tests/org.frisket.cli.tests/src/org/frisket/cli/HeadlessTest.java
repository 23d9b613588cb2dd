package org.frisket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.wiring.BundleWire;
import org.osgi.framework.wiring.BundleWiring;

/** What the command line runs on knows no screen, and what is to be plain Java knows no Eclipse. */
class HeadlessTest {

	private static final Pattern SCREEN = Pattern
			.compile("org\\.eclipse\\.(swt|jface|ui|gef|draw2d|e4)(\\..*)?|org\\.frisket\\.(ui|app)(\\..*)?");
	private static final List<String> PLAIN = List.of("org.frisket.geometry", "org.frisket.typography");

	@Test
	void nothingTheCommandLineNeedsKnowsAScreen() {
		Set<String> reached = reached("org.frisket.cli", "org.frisket.export.svg", "org.frisket.export.png");
		assertTrue(reached.contains("org.frisket.geometry") && reached.contains("org.frisket.model"),
				reached.toString());
		assertEquals(List.of(), reached.stream().filter(SCREEN.asMatchPredicate()).toList());
	}

	@Test
	void noHeadlessBundleNamesAScreenEvenOptionally() {
		for (Bundle bundle : frisketBundles()) {
			for (String header : List.of(Constants.REQUIRE_BUNDLE, Constants.IMPORT_PACKAGE)) {
				assertEquals(List.of(), names(bundle, header).stream().filter(SCREEN.asMatchPredicate()).toList(),
						bundle.getSymbolicName());
			}
		}
	}

	@Test
	void plainJavaBundlesNameNoEclipse() {
		List<Bundle> plain = frisketBundles().stream().filter(b -> PLAIN.contains(b.getSymbolicName())).toList();
		assertEquals(PLAIN.size(), plain.size());
		for (Bundle bundle : plain) {
			for (String header : List.of(Constants.REQUIRE_BUNDLE, Constants.IMPORT_PACKAGE)) {
				assertTrue(names(bundle, header).stream().noneMatch(name -> name.startsWith("org.eclipse.")),
						bundle.getSymbolicName());
			}
		}
	}

	private static List<Bundle> frisketBundles() {
		return Arrays.stream(FrameworkUtil.getBundle(HeadlessTest.class).getBundleContext().getBundles())
				.filter(b -> b.getSymbolicName().startsWith("org.frisket.")
						&& !b.getSymbolicName().matches(".*\\.tests|.*testkit"))
				.toList();
	}

	/** Names in a manifest header, attributes and directives left out. */
	private static List<String> names(Bundle bundle, String header) {
		String value = bundle.getHeaders().get(header);
		return value == null ? List.of()
				: Arrays.stream(value.replaceAll("\"[^\"]*\"", "").split(","))
						.map(clause -> clause.split(";")[0].strip()).toList();
	}

	private static Set<String> reached(String... roots) {
		Set<String> reached = new TreeSet<>();
		Deque<Bundle> open = new ArrayDeque<>(
				frisketBundles().stream().filter(b -> List.of(roots).contains(b.getSymbolicName())).toList());
		assertEquals(roots.length, open.size());
		while (!open.isEmpty()) {
			Bundle bundle = open.pop();
			BundleWiring wiring = bundle.adapt(BundleWiring.class);
			if (reached.add(bundle.getSymbolicName()) && wiring != null) {
				for (BundleWire wire : wiring.getRequiredWires(null)) {
					open.push(wire.getProviderWiring().getBundle());
				}
			}
		}
		return reached;
	}
}
