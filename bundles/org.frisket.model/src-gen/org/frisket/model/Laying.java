/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Laying</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How parts are laid on sheets.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Laying#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.Laying#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.Laying#isRoll <em>Roll</em>}</li>
 *   <li>{@link org.frisket.model.Laying#getGap <em>Gap</em>}</li>
 *   <li>{@link org.frisket.model.Laying#getMargin <em>Margin</em>}</li>
 *   <li>{@link org.frisket.model.Laying#getTurning <em>Turning</em>}</li>
 *   <li>{@link org.frisket.model.Laying#isApart <em>Apart</em>}</li>
 *   <li>{@link org.frisket.model.Laying#isByJob <em>By Job</em>}</li>
 *   <li>{@link org.frisket.model.Laying#getSeed <em>Seed</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Laying extends EObject {
	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a sheet in mm along x; 0 leaves it to the stock. Of a roll it has no meaning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(double)
	 * @generated
	 */
	double getWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(double value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a sheet in mm along y, or the width of a roll; 0 leaves it to the stock.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(double)
	 * @generated
	 */
	double getHeight();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(double value);

	/**
	 * Returns the value of the '<em><b>Roll</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is a roll.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roll</em>' attribute.
	 * @see #setRoll(boolean)
	 * @generated
	 */
	boolean isRoll();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#isRoll <em>Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Roll</em>' attribute.
	 * @see #isRoll()
	 * @generated
	 */
	void setRoll(boolean value);

	/**
	 * Returns the value of the '<em><b>Gap</b></em>' attribute.
	 * The default value is <code>"2"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm between parts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap</em>' attribute.
	 * @see #setGap(double)
	 * @generated
	 */
	double getGap();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#getGap <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap</em>' attribute.
	 * @see #getGap()
	 * @generated
	 */
	void setGap(double value);

	/**
	 * Returns the value of the '<em><b>Margin</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm along the edges.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Margin</em>' attribute.
	 * @see #setMargin(double)
	 * @generated
	 */
	double getMargin();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#getMargin <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin</em>' attribute.
	 * @see #getMargin()
	 * @generated
	 */
	void setMargin(double value);

	/**
	 * Returns the value of the '<em><b>Turning</b></em>' attribute.
	 * The default value is <code>"half"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.Turning}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How parts may be turned.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Turning</em>' attribute.
	 * @see org.frisket.model.Turning
	 * @see #setTurning(Turning)
	 * @generated
	 */
	Turning getTurning();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#getTurning <em>Turning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turning</em>' attribute.
	 * @see org.frisket.model.Turning
	 * @see #getTurning()
	 * @generated
	 */
	void setTurning(Turning value);

	/**
	 * Returns the value of the '<em><b>Apart</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the pieces of an element are laid one by one; otherwise they stay as they are set.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Apart</em>' attribute.
	 * @see #setApart(boolean)
	 * @generated
	 */
	boolean isApart();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#isApart <em>Apart</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Apart</em>' attribute.
	 * @see #isApart()
	 * @generated
	 */
	void setApart(boolean value);

	/**
	 * Returns the value of the '<em><b>By Job</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether no sheet holds parts of two jobs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>By Job</em>' attribute.
	 * @see #setByJob(boolean)
	 * @generated
	 */
	boolean isByJob();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#isByJob <em>By Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By Job</em>' attribute.
	 * @see #isByJob()
	 * @generated
	 */
	void setByJob(boolean value);

	/**
	 * Returns the value of the '<em><b>Seed</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of what is left to chance.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Seed</em>' attribute.
	 * @see #setSeed(int)
	 * @generated
	 */
	int getSeed();

	/**
	 * Sets the value of the '{@link org.frisket.model.Laying#getSeed <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seed</em>' attribute.
	 * @see #getSeed()
	 * @generated
	 */
	void setSeed(int value);

} // Laying
