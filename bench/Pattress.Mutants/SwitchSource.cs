namespace Pattress.Mutants;

/// <summary>What is compiled into the mutated library: one active mutant, and each operator as it is or as mutated.</summary>
internal static class SwitchSource
{
    internal const string Text = """
        public static class MutantSwitch
        {
            public static int Active = -1;
            public static bool[] Seen;
            public static long Deadline = long.MaxValue;

            [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.AggressiveInlining)]
            public static bool On(int id) => id == Active ? Hit() : Seen != null && Note(id);

            private static bool Hit()
            {
                if (System.Environment.TickCount64 > Deadline) throw new System.TimeoutException("mutant runs too long");
                return true;
            }

            private static bool Note(int id) { Seen[id] = true; return false; }

            public static double Add(int id, double a, double b) => On(id) ? a - b : a + b;
            public static int Add(int id, int a, int b) => On(id) ? a - b : a + b;
            public static double Sub(int id, double a, double b) => On(id) ? a + b : a - b;
            public static int Sub(int id, int a, int b) => On(id) ? a + b : a - b;
            public static double Mul(int id, double a, double b) => On(id) ? a / b : a * b;
            public static int Mul(int id, int a, int b) => On(id) ? a + b : a * b;
            public static double Div(int id, double a, double b) => On(id) ? a * b : a / b;
            public static int Div(int id, int a, int b) => On(id) ? a * b : a / b;
            public static int Rem(int id, int a, int b) => On(id) ? a : a % b;
            public static bool Less(int edge, int not, double a, double b) => On(edge) ? a <= b : On(not) ? !(a < b) : a < b;
            public static bool Less(int edge, int not, int a, int b) => On(edge) ? a <= b : On(not) ? !(a < b) : a < b;
            public static bool LessEq(int edge, int not, double a, double b) => On(edge) ? a < b : On(not) ? !(a <= b) : a <= b;
            public static bool LessEq(int edge, int not, int a, int b) => On(edge) ? a < b : On(not) ? !(a <= b) : a <= b;
            public static bool More(int edge, int not, double a, double b) => On(edge) ? a >= b : On(not) ? !(a > b) : a > b;
            public static bool More(int edge, int not, int a, int b) => On(edge) ? a >= b : On(not) ? !(a > b) : a > b;
            public static bool MoreEq(int edge, int not, double a, double b) => On(edge) ? a > b : On(not) ? !(a >= b) : a >= b;
            public static bool MoreEq(int edge, int not, int a, int b) => On(edge) ? a > b : On(not) ? !(a >= b) : a >= b;
            public static double Lit(int id, double a, double b) => On(id) ? b : a;
            public static int Lit(int id, int a, int b) => On(id) ? b : a;
            public static double Neg(int id, double x) => On(id) ? x : -x;
            public static int Neg(int id, int x) => On(id) ? x : -x;
            public static double Flip(int id, double x) => On(id) ? -x : x;
            public static int Flip(int id, int x) => On(id) ? -x : x;
            public static double Inverse(int id, double x) => On(id) ? 1 / x : x;
            public static double Min(int id, double a, double b) => On(id) ? System.Math.Max(a, b) : System.Math.Min(a, b);
            public static int Min(int id, int a, int b) => On(id) ? System.Math.Max(a, b) : System.Math.Min(a, b);
            public static double Max(int id, double a, double b) => On(id) ? System.Math.Min(a, b) : System.Math.Max(a, b);
            public static int Max(int id, int a, int b) => On(id) ? System.Math.Min(a, b) : System.Math.Max(a, b);
            public static double Abs(int id, double x) => On(id) ? x : System.Math.Abs(x);
            public static double Sqrt(int id, double x) => On(id) ? x : System.Math.Sqrt(x);
            public static double Plant(double x) => On(0) ? double.NaN : x;
        }
        """;
}
