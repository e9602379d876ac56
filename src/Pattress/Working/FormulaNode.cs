namespace Pattress.Working;

/// <summary>A formula, read from its text.</summary>
internal abstract record FormulaNode;

internal sealed record NumberNode(double Value, string Text) : FormulaNode;

internal sealed record NameNode(string Name) : FormulaNode;

internal sealed record MinusNode(FormulaNode Of) : FormulaNode;

/// <summary>One of + - * / &lt; &lt;= &gt; &gt;= == &amp;&amp; ||.</summary>
internal sealed record BinaryNode(string Operator, FormulaNode Left, FormulaNode Right) : FormulaNode;

internal sealed record CallNode(string Function, IReadOnlyList<FormulaNode> Arguments) : FormulaNode;

internal sealed record ChoiceNode(FormulaNode If, FormulaNode Then, FormulaNode Else) : FormulaNode;
