/**
 */
package org.frisket.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Mat Form</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What shape a mat makes of the elements it stands behind: their own, the taut hull about them, a hull that goes along with their hollows, a frame about them, or their shadow that falls to one side.
 * <!-- end-model-doc -->
 * @see org.frisket.model.impl.FrisketPackageImpl#getMatForm()
 * @generated
 */
public enum MatForm implements InternalMatForm {
	/**
	 * The '<em><b>Follow</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FOLLOW_VALUE
	 * @generated
	 * @ordered
	 */
	FOLLOW(0, "follow", "follow"),

	/**
	 * The '<em><b>Convex Hull</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CONVEX_HULL_VALUE
	 * @generated
	 * @ordered
	 */
	CONVEX_HULL(1, "convexHull", "convexHull"),

	/**
	 * The '<em><b>Hollow Hull</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOLLOW_HULL_VALUE
	 * @generated
	 * @ordered
	 */
	HOLLOW_HULL(2, "hollowHull", "hollowHull"),

	/**
	 * The '<em><b>Frame</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FRAME_VALUE
	 * @generated
	 * @ordered
	 */
	FRAME(3, "frame", "frame"),

	/**
	 * The '<em><b>Shadow</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHADOW_VALUE
	 * @generated
	 * @ordered
	 */
	SHADOW(4, "shadow", "shadow");

	/**
	 * The '<em><b>Follow</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FOLLOW
	 * @generated
	 * @ordered
	 */
	public static final int FOLLOW_VALUE = 0;

	/**
	 * The '<em><b>Convex Hull</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CONVEX_HULL
	 * @generated
	 * @ordered
	 */
	public static final int CONVEX_HULL_VALUE = 1;

	/**
	 * The '<em><b>Hollow Hull</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOLLOW_HULL
	 * @generated
	 * @ordered
	 */
	public static final int HOLLOW_HULL_VALUE = 2;

	/**
	 * The '<em><b>Frame</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FRAME
	 * @generated
	 * @ordered
	 */
	public static final int FRAME_VALUE = 3;

	/**
	 * The '<em><b>Shadow</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHADOW
	 * @generated
	 * @ordered
	 */
	public static final int SHADOW_VALUE = 4;

	/**
	 * An array of all the '<em><b>Mat Form</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MatForm[] VALUES_ARRAY =
		new MatForm[] {
			FOLLOW,
			CONVEX_HULL,
			HOLLOW_HULL,
			FRAME,
			SHADOW,
		};

	/**
	 * A public read-only list of all the '<em><b>Mat Form</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MatForm> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Mat Form</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MatForm get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MatForm result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mat Form</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MatForm getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MatForm result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mat Form</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MatForm get(int value) {
		switch (value) {
			case FOLLOW_VALUE: return FOLLOW;
			case CONVEX_HULL_VALUE: return CONVEX_HULL;
			case HOLLOW_HULL_VALUE: return HOLLOW_HULL;
			case FRAME_VALUE: return FRAME;
			case SHADOW_VALUE: return SHADOW;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private MatForm(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //MatForm

/**
 * A private implementation interface used to hide the inheritance from Enumerator.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
interface InternalMatForm extends org.eclipse.emf.common.util.Enumerator {
	// Empty 
}
