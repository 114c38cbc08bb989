import { type PlanRule, RULE_AIMS } from "@courtloom/match-log";
import { Field } from "../form/field.tsx";
import { FacetToggles } from "./facet-toggles.tsx";
import { AIM_LABELS, AIM_MEANS, FACET_ORDER } from "./facet-words.ts";
import { LineOnFields } from "./line-on-fields.tsx";
import styles from "./plan.module.css";
import { TargetFields } from "./target-fields.tsx";
import { ToggleGroup } from "./toggle-group.tsx";

interface RuleFormProps {
  readonly rule: PlanRule;
  readonly words: string;
  /** "of rule 2". */
  readonly about: string;
  readonly onRule: (rule: PlanRule) => void;
  readonly onWords: (words: string) => void;
}

/** Everything of one rule, to be changed. */
export function RuleForm({ rule, words, about, onRule, onWords }: RuleFormProps) {
  const { when, aim, lineOn, targets } = rule;
  return (
    <div className={styles.ruleForm}>
      <Field label={`In your own words, ${about}`} hint="As you would say it on court.">
        {(control) => (
          <textarea
            {...control}
            className={`${control.className} said`}
            rows={3}
            maxLength={400}
            value={words}
            onChange={(event) => onWords(event.target.value)}
          />
        )}
      </Field>
      <section className={styles.group} aria-label={`Which balls, ${about}`}>
        <h4>Which balls it is for</h4>
        <FacetToggles
          ask={FACET_ORDER}
          facets={when}
          about={about}
          onChange={(next) => onRule({ ...rule, when: next })}
        />
      </section>
      <section className={styles.group} aria-label={`What is wanted, ${about}`}>
        <ToggleGroup
          legend="What is wanted"
          about={about}
          toggles={RULE_AIMS.map((each) => ({ id: each, label: AIM_LABELS[each], pressed: each === aim }))}
          onPress={(id) => onRule({ ...rule, aim: RULE_AIMS.find((each) => each === id) ?? aim })}
        />
        <p>{AIM_MEANS[aim]}</p>
      </section>
      {aim === "keep" ? (
        <section className={styles.group} aria-label={`When the line is on, ${about}`}>
          <h4>When the line is on</h4>
          <LineOnFields
            lineOn={lineOn}
            about={about}
            onChange={(next) => onRule({ ...rule, lineOn: next })}
          />
        </section>
      ) : null}
      <section className={styles.group} aria-label={`Target shares, ${about}`}>
        <h4>Target shares</h4>
        <TargetFields
          targets={targets}
          about={about}
          onChange={(next) => onRule({ ...rule, targets: next })}
        />
      </section>
    </div>
  );
}
