/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bridge</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A bar between two letters of a wording, or between two parts of one letter. It follows them.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Bridge#getOne <em>One</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#getOther <em>Other</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#isPlaced <em>Placed</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#getOneX <em>One X</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#getOneY <em>One Y</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#getOtherX <em>Other X</em>}</li>
 *   <li>{@link org.frisket.model.Bridge#getOtherY <em>Other Y</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Bridge extends EObject {
	/**
	 * Returns the value of the '<em><b>One</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Index in the text of a character of the one letter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>One</em>' attribute.
	 * @see #setOne(int)
	 * @generated
	 */
	int getOne();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getOne <em>One</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>One</em>' attribute.
	 * @see #getOne()
	 * @generated
	 */
	void setOne(int value);

	/**
	 * Returns the value of the '<em><b>Other</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Index of a character of the other letter; the same for two parts of one letter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Other</em>' attribute.
	 * @see #setOther(int)
	 * @generated
	 */
	int getOther();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getOther <em>Other</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Other</em>' attribute.
	 * @see #getOther()
	 * @generated
	 */
	void setOther(int value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(double)
	 * @generated
	 */
	double getWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(double value);

	/**
	 * Returns the value of the '<em><b>Placed</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it stands at a place of its own; otherwise it stands where the gap is narrowest.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Placed</em>' attribute.
	 * @see #setPlaced(boolean)
	 * @generated
	 */
	boolean isPlaced();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#isPlaced <em>Placed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Placed</em>' attribute.
	 * @see #isPlaced()
	 * @generated
	 */
	void setPlaced(boolean value);

	/**
	 * Returns the value of the '<em><b>One X</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its end at the one letter: from the pen before that letter along its baseline, in cap heights.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>One X</em>' attribute.
	 * @see #setOneX(double)
	 * @generated
	 */
	double getOneX();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getOneX <em>One X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>One X</em>' attribute.
	 * @see #getOneX()
	 * @generated
	 */
	void setOneX(double value);

	/**
	 * Returns the value of the '<em><b>One Y</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The same downwards from the baseline.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>One Y</em>' attribute.
	 * @see #setOneY(double)
	 * @generated
	 */
	double getOneY();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getOneY <em>One Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>One Y</em>' attribute.
	 * @see #getOneY()
	 * @generated
	 */
	void setOneY(double value);

	/**
	 * Returns the value of the '<em><b>Other X</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its end at the other letter, as for the one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Other X</em>' attribute.
	 * @see #setOtherX(double)
	 * @generated
	 */
	double getOtherX();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getOtherX <em>Other X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Other X</em>' attribute.
	 * @see #getOtherX()
	 * @generated
	 */
	void setOtherX(double value);

	/**
	 * Returns the value of the '<em><b>Other Y</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The same downwards from the baseline.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Other Y</em>' attribute.
	 * @see #setOtherY(double)
	 * @generated
	 */
	double getOtherY();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bridge#getOtherY <em>Other Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Other Y</em>' attribute.
	 * @see #getOtherY()
	 * @generated
	 */
	void setOtherY(double value);

} // Bridge
