import { ions } from '../../solution/ions.js';
import { nutrientForms, type NutrientFormKey } from '../../solution/nutrient-forms.js';
