using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace Pattress.Mutants;

/// <summary>
/// Puts every mutant of a file behind the switch without copying any operand, so that the code grows in proportion. Left alone: constants,
/// attributes, patterns, default values, and what static fields are set to (it runs once, before any mutant is on), lambdas in them excepted.
/// </summary>
internal sealed class Mutating(SemanticModel model, string file, List<Mutant> found, HashSet<int> dropped) : CSharpSyntaxRewriter
{
    private int _closed;

    /// <summary>How many places in static initialisers were left alone.</summary>
    internal int Skipped { get; private set; }

    public override SyntaxNode? VisitAttributeList(AttributeListSyntax node) => node;

    public override SyntaxNode? VisitParameter(ParameterSyntax node) => node;

    public override SyntaxNode? VisitEnumMemberDeclaration(EnumMemberDeclarationSyntax node) => node;

    public override SyntaxNode? VisitConstantPattern(ConstantPatternSyntax node) => node;

    public override SyntaxNode? VisitRelationalPattern(RelationalPatternSyntax node) => node;

    public override SyntaxNode? VisitCaseSwitchLabel(CaseSwitchLabelSyntax node) => node;

    public override SyntaxNode? VisitLocalDeclarationStatement(LocalDeclarationStatementSyntax node) => node.IsConst ? node : base.VisitLocalDeclarationStatement(node);

    public override SyntaxNode? VisitFieldDeclaration(FieldDeclarationSyntax node) =>
        node.Modifiers.Any(SyntaxKind.ConstKeyword) ? node : node.Modifiers.Any(SyntaxKind.StaticKeyword) ? Closed(() => base.VisitFieldDeclaration(node)) : base.VisitFieldDeclaration(node);

    public override SyntaxNode? VisitPropertyDeclaration(PropertyDeclarationSyntax node) =>
        node.Initializer != null && node.Modifiers.Any(SyntaxKind.StaticKeyword) ? Closed(() => base.VisitPropertyDeclaration(node)) : base.VisitPropertyDeclaration(node);

    public override SyntaxNode? VisitSimpleLambdaExpression(SimpleLambdaExpressionSyntax node) => Opened(() => base.VisitSimpleLambdaExpression(node));

    public override SyntaxNode? VisitParenthesizedLambdaExpression(ParenthesizedLambdaExpressionSyntax node) => Opened(() => base.VisitParenthesizedLambdaExpression(node));

    public override SyntaxNode? VisitMethodDeclaration(MethodDeclarationSyntax node)
    {
        var visited = (MethodDeclarationSyntax)base.VisitMethodDeclaration(node)!;
        if (visited.ExpressionBody is not { } arrow || model.GetTypeInfo(node.ReturnType).Type?.SpecialType != SpecialType.System_Double) return visited;
        return visited.WithExpressionBody(arrow.WithExpression(Call("Plant", [], arrow.Expression)));
    }

    public override SyntaxNode? VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        var v = (BinaryExpressionSyntax)base.VisitBinaryExpression(node)!;
        if (node.Kind() is SyntaxKind.LogicalAndExpression or SyntaxKind.LogicalOrExpression) return Declares(node) || IsNullableBool(node) ? v : Logical(node, v);
        if (node.Kind() is SyntaxKind.EqualsExpression or SyntaxKind.NotEqualsExpression) return Declares(node) ? v : Flipped(node, v, "negated");
        if (!Plain(node.Left) || !Plain(node.Right)) return v;
        return node.Kind() switch
        {
            SyntaxKind.AddExpression => One(node, v, "Add", "- for +"),
            SyntaxKind.SubtractExpression => One(node, v, "Sub", "+ for -"),
            SyntaxKind.MultiplyExpression => One(node, v, "Mul", "/ for *"),
            SyntaxKind.DivideExpression => One(node, v, "Div", "* for /"),
            SyntaxKind.ModuloExpression => One(node, v, "Rem", "% left out"),
            SyntaxKind.LessThanExpression => Two(node, v, "Less", "<= for <"),
            SyntaxKind.LessThanOrEqualExpression => Two(node, v, "LessEq", "< for <="),
            SyntaxKind.GreaterThanExpression => Two(node, v, "More", ">= for >"),
            SyntaxKind.GreaterThanOrEqualExpression => Two(node, v, "MoreEq", "> for >="),
            _ => v,
        };
    }

    public override SyntaxNode? VisitPrefixUnaryExpression(PrefixUnaryExpressionSyntax node)
    {
        var v = (PrefixUnaryExpressionSyntax)base.VisitPrefixUnaryExpression(node)!;
        if (node.IsKind(SyntaxKind.UnaryMinusExpression) && Plain(node.Operand) && node.Operand is not LiteralExpressionSyntax) return Take(node, "- left out") is { } id ? Call("Neg", [id], v.Operand) : v;
        return node.IsKind(SyntaxKind.LogicalNotExpression) && !Declares(node) && !IsNullableBool(node) ? Flipped(node, v, "! left out") : v;
    }

    public override SyntaxNode? VisitLiteralExpression(LiteralExpressionSyntax node)
    {
        if (!node.IsKind(SyntaxKind.NumericLiteralExpression)) return node;
        var type = model.GetTypeInfo(node).ConvertedType?.SpecialType;
        double value = Convert.ToDouble(node.Token.Value, System.Globalization.CultureInfo.InvariantCulture);
        double other = value == Math.Floor(value) && Math.Abs(value) < 1e6 ? value + 1 : value * 1.5;
        if (type == SpecialType.System_Int32 && Math.Abs(value) < 1e6) return Take(node, $"{other:R} for {node}") is { } i ? Call("Lit", [i], node, Number((int)other)) : node;
        return type == SpecialType.System_Double && Take(node, FormattableString.Invariant($"{other:R} for {node}")) is { } d ? Call("Lit", [d], Number(value), Number(other)) : node;
    }

    public override SyntaxNode? VisitInvocationExpression(InvocationExpressionSyntax node)
    {
        if (node.Expression is IdentifierNameSyntax { Identifier.Text: "nameof" }) return node;
        var v = (InvocationExpressionSyntax)base.VisitInvocationExpression(node)!;
        v = WithTexts(node, v);
        if (model.GetSymbolInfo(node).Symbol is not IMethodSymbol { ContainingType: { Name: "Math", ContainingNamespace.Name: "System" } } method) return v;
        if (!node.ArgumentList.Arguments.All(a => Plain(a.Expression))) return v;
        string? change = method.Name switch { "Min" => "Max for Min", "Max" => "Min for Max", "Abs" => "Abs left out", "Sqrt" => "Sqrt left out", _ => null };
        return change != null && Take(node, change) is { } id ? Call(method.Name, [id], [.. v.ArgumentList.Arguments.Select(a => a.Expression)]) : v;
    }

    public override SyntaxNode? VisitConditionalExpression(ConditionalExpressionSyntax node)
    {
        var v = (ConditionalExpressionSyntax)base.VisitConditionalExpression(node)!;
        return Declares(node.Condition) ? v : v.WithCondition(FlippedCondition(node.Condition, v.Condition));
    }

    public override SyntaxNode? VisitIfStatement(IfStatementSyntax node)
    {
        var v = (IfStatementSyntax)base.VisitIfStatement(node)!;
        return Declares(node.Condition) ? v : v.WithCondition(FlippedCondition(node.Condition, v.Condition));
    }

    public override SyntaxNode? VisitAssignmentExpression(AssignmentExpressionSyntax node)
    {
        var v = (AssignmentExpressionSyntax)base.VisitAssignmentExpression(node)!;
        if (!Plain(node.Left) || !Plain(node.Right)) return v;
        string? helper = node.Kind() switch { SyntaxKind.AddAssignmentExpression or SyntaxKind.SubtractAssignmentExpression => "Flip", SyntaxKind.MultiplyAssignmentExpression or SyntaxKind.DivideAssignmentExpression => "Inverse", _ => null };
        return helper != null && Take(node, "the other way") is { } id ? v.WithRight(Call(helper, [id], v.Right)) : v;
    }

    public override SyntaxNode? VisitExpressionStatement(ExpressionStatementSyntax node)
    {
        var v = (ExpressionStatementSyntax)base.VisitExpressionStatement(node)!;
        if (node.Expression is not (InvocationExpressionSyntax or AssignmentExpressionSyntax or PostfixUnaryExpressionSyntax or PrefixUnaryExpressionSyntax)) return v;
        return !Declares(node) && node.Expression is not AssignmentExpressionSyntax { Left: TupleExpressionSyntax } && Take(node, "left out") is { } id ? IfStatement(PrefixUnaryExpression(SyntaxKind.LogicalNotExpression, Call("On", [id])), v) : v;
    }

    private static LiteralExpressionSyntax Number(int n) => LiteralExpression(SyntaxKind.NumericLiteralExpression, Literal(n));

    private static LiteralExpressionSyntax Number(double n) => LiteralExpression(SyntaxKind.NumericLiteralExpression, Literal(n));

    private static bool Declares(SyntaxNode node) => node.DescendantNodesAndSelf().Any(n => n is SingleVariableDesignationSyntax or DeclarationExpressionSyntax);

    private bool IsNullableBool(ExpressionSyntax node) => model.GetTypeInfo(node).Type?.SpecialType != SpecialType.System_Boolean;

    private bool Plain(ExpressionSyntax node) => model.GetTypeInfo(node) is { Type.SpecialType: SpecialType.System_Double or SpecialType.System_Int32 };

    private static InvocationExpressionSyntax Call(string name, int[] ids, params ExpressionSyntax[] operands) => InvocationExpression(
        ParseExpression("global::MutantSwitch." + name),
        ArgumentList(SeparatedList(ids.Select(Number).Concat(operands.Select(o => o.WithoutTrivia())).Select(Argument))));

    /// <summary>A new mutant's number; null where it must be left alone.</summary>
    private int? Take(SyntaxNode node, string change)
    {
        if (_closed > 0) { Skipped++; return null; }
        int id = found.Count;
        string code = string.Join(' ', node.ToString().Split((char[])[' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));
        found.Add(new(id, file, node.GetLocation().GetLineSpan().StartLinePosition.Line + 1, change, code.Length > 110 ? code[..110] + "…" : code));
        return dropped.Contains(id) ? null : id;
    }

    private ExpressionSyntax One(BinaryExpressionSyntax node, BinaryExpressionSyntax v, string helper, string change) =>
        Take(node, change) is { } id ? Call(helper, [id], v.Left, v.Right) : v;

    private ExpressionSyntax Two(BinaryExpressionSyntax node, BinaryExpressionSyntax v, string helper, string change)
    {
        var (edge, not) = (Take(node, change), Take(node, "negated"));
        return edge is { } e && not is { } n ? Call(helper, [e, n], v.Left, v.Right) : v;
    }

    private static ExpressionSyntax Xor(ExpressionSyntax e, int id) => ParenthesizedExpression(BinaryExpression(SyntaxKind.ExclusiveOrExpression,
        ParenthesizedExpression(e.WithoutTrivia()), Token(SyntaxKind.CaretToken).WithLeadingTrivia(Space).WithTrailingTrivia(Space), Call("On", [id])));

    // a || b is not (not a and not b): with the mutant on, both operands and the result are flipped.
    private ExpressionSyntax Logical(BinaryExpressionSyntax node, BinaryExpressionSyntax v) => Take(node, node.IsKind(SyntaxKind.LogicalAndExpression) ? "|| for &&" : "&& for ||") is { } id
        ? Xor(v.WithLeft(Xor(v.Left, id).WithTrailingTrivia(Space)).WithRight(Xor(v.Right, id)), id) : v;

    private ExpressionSyntax Flipped(ExpressionSyntax node, ExpressionSyntax v, string change) =>
        model.GetTypeInfo(node).Type?.SpecialType == SpecialType.System_Boolean && Take(node, change) is { } id ? Xor(v, id) : v;

    // A comparison has its own negation already.
    private ExpressionSyntax FlippedCondition(ExpressionSyntax node, ExpressionSyntax v) =>
        node is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.EqualsExpression or (int)SyntaxKind.NotEqualsExpression or (int)SyntaxKind.LessThanExpression or (int)SyntaxKind.LessThanOrEqualExpression or (int)SyntaxKind.GreaterThanExpression or (int)SyntaxKind.GreaterThanOrEqualExpression }
            or PrefixUnaryExpressionSyntax ? v : Flipped(node, v, "negated");

    /// <summary>The source text that the compiler would have handed over stays that of the unmutated source.</summary>
    private InvocationExpressionSyntax WithTexts(InvocationExpressionSyntax node, InvocationExpressionSyntax v)
    {
        if (model.GetOperation(node) is not IInvocationOperation call) return v;
        foreach (var a in call.Arguments)
        {
            bool text = a.ArgumentKind == ArgumentKind.DefaultValue && a.Parameter!.GetAttributes().Any(x => x.AttributeClass?.Name == "CallerArgumentExpressionAttribute");
            if (text && a.Value.ConstantValue is { HasValue: true, Value: string s })
                v = v.AddArgumentListArguments(Argument(NameColon(a.Parameter!.Name), default, LiteralExpression(SyntaxKind.StringLiteralExpression, Literal(s))));
        }
        return v;
    }

    private SyntaxNode? Closed(Func<SyntaxNode?> visit)
    {
        _closed++;
        var result = visit();
        _closed--;
        return result;
    }

    private SyntaxNode? Opened(Func<SyntaxNode?> visit)
    {
        int closed = _closed;
        _closed = 0;
        var result = visit();
        _closed = closed;
        return result;
    }
}
