/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Operation</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One working of an outline by one tool.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Operation#getKind <em>Kind</em>}</li>
 *   <li>{@link org.frisket.model.Operation#getTool <em>Tool</em>}</li>
 *   <li>{@link org.frisket.model.Operation#getPasses <em>Passes</em>}</li>
 *   <li>{@link org.frisket.model.Operation#getDash <em>Dash</em>}</li>
 *   <li>{@link org.frisket.model.Operation#getGap <em>Gap</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Operation extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The default value is <code>"cut"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.OperationKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.frisket.model.OperationKind
	 * @see #isSetKind()
	 * @see #unsetKind()
	 * @see #setKind(OperationKind)
	 * @generated
	 */
	OperationKind getKind();

	/**
	 * Sets the value of the '{@link org.frisket.model.Operation#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.frisket.model.OperationKind
	 * @see #isSetKind()
	 * @see #unsetKind()
	 * @see #getKind()
	 * @generated
	 */
	void setKind(OperationKind value);

	/**
	 * Unsets the value of the '{@link org.frisket.model.Operation#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetKind()
	 * @see #getKind()
	 * @see #setKind(OperationKind)
	 * @generated
	 */
	void unsetKind();

	/**
	 * Returns whether the value of the '{@link org.frisket.model.Operation#getKind <em>Kind</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Kind</em>' attribute is set.
	 * @see #unsetKind()
	 * @see #getKind()
	 * @see #setKind(OperationKind)
	 * @generated
	 */
	boolean isSetKind();

	/**
	 * Returns the value of the '<em><b>Tool</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the tool; null leaves the choice to the settings of the stock.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tool</em>' attribute.
	 * @see #setTool(String)
	 * @generated
	 */
	String getTool();

	/**
	 * Sets the value of the '{@link org.frisket.model.Operation#getTool <em>Tool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tool</em>' attribute.
	 * @see #getTool()
	 * @generated
	 */
	void setTool(String value);

	/**
	 * Returns the value of the '<em><b>Passes</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many times it is done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Passes</em>' attribute.
	 * @see #setPasses(int)
	 * @generated
	 */
	int getPasses();

	/**
	 * Sets the value of the '{@link org.frisket.model.Operation#getPasses <em>Passes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Passes</em>' attribute.
	 * @see #getPasses()
	 * @generated
	 */
	void setPasses(int value);

	/**
	 * Returns the value of the '<em><b>Dash</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a crease or a perforation: length of a dash in mm; 0 leaves the line whole for the machine to break up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dash</em>' attribute.
	 * @see #setDash(double)
	 * @generated
	 */
	double getDash();

	/**
	 * Sets the value of the '{@link org.frisket.model.Operation#getDash <em>Dash</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dash</em>' attribute.
	 * @see #getDash()
	 * @generated
	 */
	void setDash(double value);

	/**
	 * Returns the value of the '<em><b>Gap</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length of the gaps between dashes in mm; 0 leaves the line whole.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap</em>' attribute.
	 * @see #setGap(double)
	 * @generated
	 */
	double getGap();

	/**
	 * Sets the value of the '{@link org.frisket.model.Operation#getGap <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap</em>' attribute.
	 * @see #getGap()
	 * @generated
	 */
	void setGap(double value);

} // Operation
