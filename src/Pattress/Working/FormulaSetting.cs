namespace Pattress.Working;

/// <summary>
/// Sets the text of a formula in type: powers above, indices below, quotients as fractions, parentheses only where they are still needed. The
/// formula is the same one that was calculated and that the guard evaluates; a test reads what is set back and evaluates it again.
/// </summary>
public static class FormulaSetting
{
    // Ranks: 1 comparison, 2 sum, 3 product, 4 what follows a minus, 5 what carries a power.
    private const int Sum = 2, Product = 3, Signed = 4, Atom = 5;

    /// <summary>The formula with its symbols.</summary>
    /// <exception cref="FormatException">It cannot be read.</exception>
    public static Setting Formula(string formula) => Of(FormulaParser.Parse(formula), Symbol, Figures, 0);

    /// <summary>A formula into which numbers were put already, each written as whoever shows it wants.</summary>
    /// <exception cref="FormatException">It cannot be read.</exception>
    public static Setting Numbers(string numbers, Func<double, string> show) => Of(FormulaParser.Parse(numbers), Symbol, n => Written(show(n.Value)), 0);

    /// <summary>A symbol as standards print it: <c>f_ax_k</c> as f with ax,k below, <c>rho_k</c> as ρ with k below.</summary>
    public static Setting Symbol(string name)
    {
        string[] parts = FormulaText.Symbol(name).Split('_', 2);
        var head = new SetText(parts[0]);
        return parts.Length == 1 ? head : new SetScript(head, parts[1], null);
    }

    /// <summary>A number written with an exponent is set as a power of ten.</summary>
    public static Setting Written(string number)
    {
        int e = number.IndexOfAny(['e', 'E']);
        if (e < 0) return new SetText(number.Replace('-', '−'));
        var power = new SetScript(new SetText("10"), "", new SetText(number[(e + 1)..].TrimStart('+').Replace('-', '−')));
        return number[..e] == "1" ? power : new SetRow([new SetText(number[..e].Replace('-', '−')), new SetSign("·"), power]);
    }

    /// <summary>A result: the number as it is written, and its unit.</summary>
    public static Setting Result(string number, string unit) => unit.Length == 0 ? Written(number) : Row(Written(number), new SetText("\u00A0" + Upright(unit)));

    private static string Upright(string unit) => unit.Replace("mm2", "mm²", StringComparison.Ordinal).Replace("mm3", "mm³", StringComparison.Ordinal).Replace("mm4", "mm⁴", StringComparison.Ordinal);

    /// <summary>The parts between which a line may be broken: each begins with a sign, but for the first.</summary>
    public static IReadOnlyList<Setting> Pieces(Setting setting)
    {
        if (setting is not SetRow row) return [setting];
        var pieces = new List<Setting>();
        var now = new List<Setting>();
        foreach (var part in row.Parts)
        {
            if (part is SetSign && now.Exists(p => p is not SetSign)) { pieces.Add(Row([.. now])); now.Clear(); }
            now.Add(part);
        }
        pieces.Add(Row([.. now]));
        return pieces;
    }

    private static Setting Figures(NumberNode number) => Written(number.Text);

    private static Setting Of(FormulaNode node, Func<string, Setting> name, Func<NumberNode, Setting> figures, int outer) => node switch
    {
        NumberNode n => Fenced(figures(n), figures(n) is SetRow && outer >= Product),
        NameNode n => name(n.Name),
        MinusNode m => Fenced(Row(new SetText("−"), Of(m.Of, name, figures, Signed)), outer > Sum && outer != Product),
        BinaryNode { Operator: "/" } b => Fenced(new SetFraction(Of(b.Left, name, figures, 0), Of(b.Right, name, figures, 0)), outer >= Atom),
        BinaryNode b => Operation(b, name, figures, outer),
        ChoiceNode c => Fenced(Row(Of(c.Then, name, figures, 1), new SetSign(" if "), Of(c.If, name, figures, 1), new SetSign(", else "), Of(c.Else, name, figures, 1)), outer > 0),
        CallNode c => Call(c, name, figures, outer),
        _ => throw new FormatException(node.GetType().Name),
    };

    private static Setting Operation(BinaryNode b, Func<string, Setting> name, Func<NumberNode, Setting> figures, int outer)
    {
        int rank = b.Operator switch { "*" => Product, "+" or "-" => Sum, _ => 1 };
        string sign = b.Operator switch { "*" => "·", "-" => "−", "<=" => "≤", ">=" => "≥", "==" => "=", "&&" => " and ", "||" => " or ", var o => o };
        var right = Of(b.Right, name, figures, b.Right is MinusNode && rank > 1 ? Signed : b.Operator is "-" ? rank + 1 : rank);
        return Fenced(Row(Of(b.Left, name, figures, rank), new SetSign(sign), right), rank < outer);
    }

    private static Setting Call(CallNode call, Func<string, Setting> name, Func<NumberNode, Setting> figures, int outer)
    {
        Setting At(int i, int rank = 0) => Of(call.Arguments[i], name, figures, rank);
        return call.Function switch
        {
            "Pow" => Fenced(Raised(At(0, Atom), At(1)), outer >= Atom),
            "Exp" => Fenced(Raised(new SetText("e"), At(0)), outer >= Atom),
            "Sqrt" => new SetRoot(At(0), ""),
            "Cbrt" => new SetRoot(At(0), "3"),
            "Abs" => new SetFence("|", At(0), "|"),
            "Ceiling" => new SetFence("⌈", At(0), "⌉"),
            "Floor" => new SetFence("⌊", At(0), "⌋"),
            _ => Function(call, [.. Arguments(call).Select(a => Of(a, name, figures, 0))]),
        };
    }

    /// <summary>The arguments of a function; min(min(a; b); c) is min(a; b; c).</summary>
    internal static IEnumerable<FormulaNode> Arguments(CallNode call) => call.Function is "Min" or "Max"
        ? call.Arguments.SelectMany(a => a is CallNode inner && inner.Function == call.Function ? Arguments(inner) : [a]) : call.Arguments;

    private static Setting Function(CallNode call, IReadOnlyList<Setting> arguments)
    {
        var list = arguments.SelectMany((a, i) => i == 0 ? new[] { a } : [new SetSign("; "), a]).ToArray();
        return Row(new SetText(call.Function == "Log" ? "ln" : call.Function.ToLowerInvariant()), new SetFence("(", Row(list), ")"));
    }

    private static SetScript Raised(Setting of, Setting above) => of is SetScript { Above: null } s ? s with { Above = above } : new SetScript(of, "", above);

    private static Setting Fenced(Setting of, bool needed) => needed ? new SetFence("(", of, ")") : of;

    /// <summary>Parts beside one another, such as a symbol, an equals sign and its formula.</summary>
    public static Setting Row(params IReadOnlyList<Setting> parts)
    {
        var flat = parts.SelectMany(p => p is SetRow row ? row.Parts : [p]).ToList();
        return flat.Count == 1 ? flat[0] : new SetRow(flat);
    }
}
