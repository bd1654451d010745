/**
 * Nothing at module level may have a side effect. What runs when a module loads stays in a consumer's bundle with everything it touches:
 * a call that is not annotated where it stands (bundlers do not all carry an annotation on a function over to another file),
 * a class with a static block or a computed key, and what is spread, which asks its iterator or its getters.
 */
export const pure = {
  meta: {
    type: 'problem',
    fixable: 'code',
    schema: [],
    messages: {
      call: 'A call at module level needs /* @__PURE__ */ before it, or belongs inside a function.',
      spread: 'What is spread at module level stays in every bundle: write it out, or spread it in a /* @__PURE__ */ call of a function.',
      statement: 'A statement at module level has a side effect.',
      class: 'A class with a static block or a computed key stays in every bundle: make it inside a /* @__PURE__ */ call.',
    },
  },
  create(context) {
    const isDeferred = (node) => /Function|StaticBlock/.test(node.type) || (node.type === 'PropertyDefinition' && !node.static);
    const atModuleLevel = (node) => !context.sourceCode.getAncestors(node).some(isDeferred);
    const call = (node) => {
      const comments = context.sourceCode.getCommentsBefore(context.sourceCode.getFirstToken(node));
      if (!atModuleLevel(node) || comments.some((comment) => /[@#]__PURE__/.test(comment.value))) return;
      context.report({ node, messageId: 'call', fix: (fixer) => fixer.insertTextBefore(node, '/* @__PURE__ */ ') });
    };
    const inClass = (node) => {
      if (atModuleLevel(node)) context.report({ node, messageId: 'class' });
    };
    return {
      CallExpression: call,
      NewExpression: call,
      TaggedTemplateExpression: call,
      SpreadElement: (node) => {
        if (atModuleLevel(node)) context.report({ node, messageId: 'spread' });
      },
      'Program > ExpressionStatement': (node) => context.report({ node, messageId: 'statement' }),
      StaticBlock: inClass,
      'ClassBody > [computed=true]:not([key.object.name="Symbol"]):not([declare=true])': inClass,
    };
  },
};
