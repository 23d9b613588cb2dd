package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;

import org.frisket.model.internal.NumberText;
import org.junit.jupiter.api.Test;

class MatrixTest {

	@Test
	void thenAppliesTheFirstMapFirst() {
		Matrix turn = new Matrix(0, 1, -1, 0, 0, 0);
		assertEquals(new Matrix(0, 1, -1, 0, -2, 1), Matrix.translation(1, 2).then(turn));
		assertEquals(new Matrix(0, 1, -1, 0, 1, 2), turn.then(Matrix.translation(1, 2)));
		assertEquals(turn, turn.then(Matrix.IDENTITY));
		assertEquals(turn, Matrix.IDENTITY.then(turn));
	}

	@Test
	void identityIsWrittenAsItsDefaultInTheModel() {
		assertEquals("1 0 0 1 0 0", Matrix.IDENTITY.toString());
		assertEquals(Matrix.IDENTITY, FrisketFactory.INSTANCE.createOutline().getTransform());
	}

	@Test
	void textComesBackAsTheSameMap() {
		Random random = new Random(3);
		for (int i = 0; i < 2000; i++) {
			Matrix matrix = new Matrix(random.nextGaussian(), random.nextDouble() * 1e-9, random.nextLong(),
					random.nextFloat(), random.nextInt(1000) / 8.0, -random.nextInt(100000) / 1000.0);
			assertEquals(matrix, Matrix.parse(matrix.toString()));
		}
	}

	@Test
	void negativeZeroIsZero() {
		assertEquals(Matrix.IDENTITY, new Matrix(1, -0.0, -0.0, 1, -0.0, -0.0));
		assertEquals("0", NumberText.write(-0.0));
	}

	/** 2E23 is the example of JDK-4511638: Java before 19 writes it as 2.0000000000000003E23 or the like. */
	@Test
	void numbersHaveTheFewestDigits() {
		assertEquals("2E+23", NumberText.write(2e23));
		assertEquals("5E-324", NumberText.write(Double.MIN_VALUE));
		assertEquals("0.1", NumberText.write(0.1));
		assertEquals("0.30000000000000004", NumberText.write(0.1 + 0.2));
		assertEquals("-12.5", NumberText.write(-12.5));
		assertEquals("123456789012345680000", NumberText.write(1.2345678901234568e20));
		assertEquals("1.7976931348623157E+308", NumberText.write(Double.MAX_VALUE));
	}

	@Test
	void onlyFiniteNumbersAreRead() {
		for (String bad : new String[] { "", " ", "1 ", "NaN", "Infinity", "1,5", "0x1p3", "1d", "1e400", "--1", "1e",
				"." }) {
			assertThrows(NumberFormatException.class, () -> NumberText.parse(bad), bad);
		}
		assertEquals(0.5, NumberText.parse(".5"));
		assertEquals(-2, NumberText.parse("-2."));
		assertThrows(IllegalArgumentException.class, () -> Matrix.parse("1 0 0 1 0"));
		assertThrows(IllegalArgumentException.class, () -> Matrix.parse("1 0 0 1 0 0 0"));
		assertThrows(IllegalArgumentException.class, () -> new Matrix(1, 0, 0, Double.NaN, 0, 0));
	}
}
