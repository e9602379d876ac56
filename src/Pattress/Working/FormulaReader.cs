namespace Pattress.Working;

/// <summary>
/// Evaluates the printed text of a formula from its printed inputs, so that a reader (and the guard test) can do the sum
/// again: + - * /, comparisons, <c>?:</c>, parentheses, PI and the functions that the rules use.
/// </summary>
public static class FormulaReader
{
    /// <summary>The value of the formula. Throws <see cref="FormatException"/> on an unknown name, function or sign.</summary>
    public static double Evaluate(string formula, IReadOnlyList<KeyValuePair<string, double>> inputs) =>
        Value(FormulaParser.Parse(formula), inputs);

    private static double Value(FormulaNode node, IReadOnlyList<KeyValuePair<string, double>> inputs) => node switch
    {
        NumberNode n => n.Value,
        NameNode n => Named(n.Name, inputs),
        MinusNode m => -Value(m.Of, inputs),
        BinaryNode b => Apply(b.Operator, Value(b.Left, inputs), Value(b.Right, inputs)),
        ChoiceNode c => Value(c.If, inputs) != 0 ? Value(c.Then, inputs) : Value(c.Else, inputs),
        CallNode c => Call(c.Function, [.. c.Arguments.Select(a => Value(a, inputs))]),
        _ => throw new FormatException(node.GetType().Name),
    };

    private static double Named(string name, IReadOnlyList<KeyValuePair<string, double>> inputs)
    {
        foreach (var input in inputs) if (input.Key == name) return input.Value;
        return name == "PI" ? Math.PI : throw new FormatException($"'{name}' is not among the inputs");
    }

    private static double Apply(string op, double a, double b) => op switch
    {
        "+" => a + b,
        "-" => a - b,
        "*" => a * b,
        "/" => a / b,
        "<" => a < b ? 1 : 0,
        "<=" => a <= b ? 1 : 0,
        ">" => a > b ? 1 : 0,
        ">=" => a >= b ? 1 : 0,
        "==" => a == b ? 1 : 0,
        "&&" => a != 0 && b != 0 ? 1 : 0,
        "||" => a != 0 || b != 0 ? 1 : 0,
        _ => throw new FormatException(op),
    };

    private static double Call(string function, double[] x) => (function, x.Length) switch
    {
        ("Pow", 2) => Math.Pow(x[0], x[1]),
        ("Sqrt", 1) => Math.Sqrt(x[0]),
        ("Cbrt", 1) => Math.Cbrt(x[0]),
        ("Abs", 1) => Math.Abs(x[0]),
        ("Exp", 1) => Math.Exp(x[0]),
        ("Log", 1) => Math.Log(x[0]),
        ("Sin", 1) => Math.Sin(x[0]),
        ("Cos", 1) => Math.Cos(x[0]),
        ("Tan", 1) => Math.Tan(x[0]),
        ("Ceiling", 1) => Math.Ceiling(x[0]),
        ("Floor", 1) => Math.Floor(x[0]),
        ("Round", 1) => Math.Round(x[0]),
        ("Min", 2) => Math.Min(x[0], x[1]),
        ("Max", 2) => Math.Max(x[0], x[1]),
        _ => throw new FormatException($"unknown function {function}"),
    };
}
